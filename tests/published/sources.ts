import { astmC270 } from './checks/astm-c270';
import { astmC67 } from './checks/astm-c67';
import { biaTechnicalNote20 } from './checks/bia-technical-note-20';
import { brickSuction } from './checks/brick-suction';
import { commonPractice } from './checks/common-practice';
import { evaporationEquation } from './checks/evaporation';
import { acidTable, stoichiometry } from './checks/hydrochloric-acid';
import {
  dilutionArticle,
  ncmaTek,
  tradeMagazine1971,
  tradeMagazine1997,
  tradeSite,
} from './checks/mixed-walls';
import { masonryTextbook } from './checks/masonry-textbook';
import { nistSp811 } from './checks/nist-sp-811';
import { fanWidths, jetForce, nozzleSizes } from './checks/nozzle-charts';
import { gsaProcedure, regionalPressure, stoneProducer } from './checks/pressure';
import { regulations } from './checks/regulations';
import { sqrtTimeLaw } from './checks/sqrt-time-law';
import { unitReference } from './checks/unit-reference';
import type { SourceChecks } from './check';

/** Every source that values are checked against. */
export const checkedSources: readonly SourceChecks[] = [
  nistSp811,
  unitReference,
  astmC67,
  brickSuction,
  sqrtTimeLaw,
  astmC270,
  nozzleSizes,
  fanWidths,
  jetForce,
  acidTable,
  stoichiometry,
  evaporationEquation,
  biaTechnicalNote20,
  masonryTextbook,
  regionalPressure,
  gsaProcedure,
  stoneProducer,
  ncmaTek,
  tradeMagazine1997,
  tradeMagazine1971,
  dilutionArticle,
  tradeSite,
  regulations,
  commonPractice,
];
