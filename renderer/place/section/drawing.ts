import type { Place, PlanSite, Section } from '../../../core/index.ts';
import type { UnitPreferences } from '../../state/units.ts';
import type { Cloths } from './cloths.ts';
import type { Hatches } from './hatches.ts';
import type { InnerLayers } from './layers.ts';
import type { Layout } from './layout.ts';
import type { SectionPart } from './parts.ts';
import type { SectionView } from './view.ts';

/** All that one drawing is made from; every part of it is handed the whole. */
export interface Drawing {
  readonly place: Place;
  readonly section: Section;
  readonly view: SectionView;
  readonly layout: Layout;
  readonly layers: InnerLayers;
  readonly hatches: Hatches;
  readonly units: UnitPreferences;
  /** Snow that lies on the roof; null where none does. */
  readonly snow: PlanSite['snow'];
  /** Cloths that are up at the time drawn; where no time is meant, all that the place has are drawn alike. */
  readonly cloths?: Cloths;
  readonly onselect: ((part: SectionPart) => void) | undefined;
}
