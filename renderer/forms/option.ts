/** One line of a list to choose from. */
export interface Option {
  readonly value: string;
  readonly name: string;
}
