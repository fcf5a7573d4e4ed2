/** Light of lamps on one level of plants. */
export interface FieldLevel {
  readonly shelf: 'lower' | 'upper';
  /** Height of the level over the lower one's plants [m]; 0 for the lower. */
  readonly height: number;
  /** Area of the level [m²] and the rectangle the map covers: sides, and its middle off the middle of the place [m]. */
  readonly area: number;
  readonly length: number;
  readonly width: number;
  readonly along: number;
  readonly across: number;
  /** Photon flux density: mean, least, most [µmol m⁻² s⁻¹]; least over mean. */
  readonly average: number;
  readonly least: number;
  readonly most: number;
  readonly evenness: number;
  /** By cell, `map[row * columns + column]`, columns along the length, rows from the front to the back. */
  readonly map: Float64Array;
  readonly columns: number;
  readonly rows: number;
}
