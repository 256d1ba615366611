import { astmC270 } from './checks/astm-c270';
import { astmC67 } from './checks/astm-c67';
import { biaTechnicalNote20 } from './checks/bia-technical-note-20';
import { brickSuction, measuredSuction } from './checks/brick-suction';
import { commonPractice } from './checks/common-practice';
import { earnedValueManual, earnedValueCard } from './checks/earned-value';
import { evaporationEquation } from './checks/evaporation';
import { acidTable, stoichiometry } from './checks/hydrochloric-acid';
import { masonryTextbook } from './checks/masonry-textbook';
import { coldAir, ncmaTek, tradeMagazine1971, tradeMagazine1997 } from './checks/mixed-walls';
import { nistSp811 } from './checks/nist-sp-811';
import { fanWidths, jetForce, nozzleSizes } from './checks/nozzle-charts';
import {
  brickMakerPressure,
  gsaProcedure,
  navfacPressure,
  regionalPressure,
  stoneProducer,
  vob,
} from './checks/pressure';
import { regulations } from './checks/regulations';
import { sqrtTimeLaw } from './checks/sqrt-time-law';
import { unitReference } from './checks/unit-reference';
import { cdhuWhole, fdeWhole, gesnrWhole, navfacWhole, sinapiWhole } from './checks/whole-estimate';
import {
  andalusiaTasks,
  australianPractice,
  cdhuTasks,
  navfacDetergent,
  rinseFlows,
  sinapiTasks,
  table6219,
} from './checks/work-norms';
import type { SourceChecks } from './check';

/** Sources whose values check the same sort of thing. */
export interface CheckedPart {
  readonly title: string;
  readonly text: string;
  readonly sources: readonly SourceChecks[];
}

/** Every source that values are checked against, by what they check. */
export const checkedParts: readonly CheckedPart[] = [
  {
    title: 'The whole estimate beside public norms',
    text: 'Our area per labor-hour for a face of 4,000 ft2, 20 ft high, with moves and set-up, a team of two. None of the norms is for new masonry on a facade: they bracket ours, they do not found it, and the split into parts is ours. A whole clean runs from 25 to 68 ft2 per labor-hour in them. What differs in the work stands beside each.',
    sources: [sinapiWhole, fdeWhole, cdhuWhole, gesnrWhole, navfacWhole],
  },
  {
    title: 'Rates, hours and water of single tasks',
    text: 'Values from outside that check a rate, an hour, or how much water, cleaner or film is used.',
    sources: [
      sinapiTasks,
      cdhuTasks,
      table6219,
      andalusiaTasks,
      rinseFlows,
      navfacDetergent,
      australianPractice,
      brickSuction,
      measuredSuction,
    ],
  },
  {
    title: 'Laws of nature and conversions',
    text: 'Formulas, tables of matter, and units. They say that the arithmetic is right, not that a rate is.',
    sources: [
      nistSp811,
      unitReference,
      astmC67,
      sqrtTimeLaw,
      nozzleSizes,
      fanWidths,
      jetForce,
      acidTable,
      stoichiometry,
      evaporationEquation,
    ],
  },
  {
    title: 'Limits and rules',
    text: 'What a text allows or forbids, and what our checks and steps make of it.',
    sources: [
      biaTechnicalNote20,
      masonryTextbook,
      astmC270,
      regionalPressure,
      gsaProcedure,
      stoneProducer,
      navfacPressure,
      brickMakerPressure,
      vob,
      ncmaTek,
      tradeMagazine1997,
      tradeMagazine1971,
      coldAir,
      regulations,
      commonPractice,
    ],
  },
  {
    title: 'Progress of the work',
    text: 'Index and forecasts of earned value. No worked example of a public-domain guide could be read.',
    sources: [earnedValueManual, earnedValueCard],
  },
];

/** Every source that values are checked against. */
export const checkedSources: readonly SourceChecks[] = checkedParts.flatMap(({ sources }) => sources);
