import { acidMoles, alkaliMass } from '../../../src/estimate/neutralizer';
import { fromBase, toBase } from '../../../src/quantity/conversions';
import { constants } from '../../../src/rules/constants';
import { printed, type PublishedCheck, type SourceChecks } from '../check';
import { byFormula } from '../second-library';

// mass fraction in %, kg/L, mol/L
const table = [
  [10, 1.048, 2.87],
  [20, 1.098, 6.02],
  [30, 1.149, 9.45],
  [32, 1.159, 10.17],
  [36, 1.179, 11.64],
] as const;

/** Density and concentration of hydrochloric acid. */
export const acidTable: SourceChecks = {
  document: 'Table of hydrochloric acid at 20 degC',
  edition: 'as read, not stated',
  section: 'mass fraction, density, concentration',
  checks: table.map(([percent, density, molar]): PublishedCheck => ({
    what: `acid in a liter at ${String(percent)}%, ${String(density)} kg/L`,
    value: molar,
    unit: 'mol/L',
    mark: 'published',
    within: molar * 0.001 + 0.005,
    because: 'density printed to 3 decimals, concentration to 2',
    ours: () => acidMoles(1, density, percent / 100),
  })),
};

const gallon = (): number => acidMoles(toBase(1, 'gal'), 1.16, 0.3145);
const MORE_OR_LESS = 0.002;
const ofGallon = (value: number): Pick<PublishedCheck, 'value' | 'unit' | 'mark' | 'within' | 'because'> => ({
  value,
  unit: 'lb',
  mark: 'computed',
  within: value * MORE_OR_LESS,
  because: 'within 0.2%, as the strength of the acid is known',
});

/** What neutralizes it. */
export const stoichiometry: SourceChecks = {
  document: 'Stoichiometry of HCl with NaHCO3 and Na2CO3, standard atomic weights',
  edition: 'IUPAC 1995, table 2, rounded to 3 decimals: H 1.008, C 12.011, O 15.999, Na 22.990, Cl 35.453',
  section: 'HCl + NaHCO3; 2 HCl + Na2CO3',
  checks: [
    {
      what: 'molar mass of NaHCO3',
      value: 84.007,
      unit: 'g/mol',
      mark: 'published',
      within: 0.0015,
      because: 'atomic weights printed to 3 decimals',
      ours: () => fromBase(constants.molarMassNaHCO3.value, 'g/mol'),
      second: byFormula('22.990 + 1.008 + 12.011 + 3 * 15.999', 'mathjs, from atomic weights'),
    },
    {
      what: 'molar mass of Na2CO3',
      value: 105.988,
      unit: 'g/mol',
      mark: 'computed',
      within: 0.0015,
      because: 'atomic weights printed to 3 decimals',
      ours: () => fromBase(constants.molarMassNa2CO3.value, 'g/mol'),
      second: byFormula('2 * 22.990 + 12.011 + 3 * 15.999', 'mathjs, from atomic weights'),
    },
    {
      what: 'molar mass of HCl',
      value: 36.461,
      unit: 'g/mol',
      mark: 'computed',
      within: 0.0015,
      because: 'atomic weights printed to 3 decimals',
      ours: () => fromBase(constants.molarMassHCl.value, 'g/mol'),
      second: byFormula('1.008 + 35.453', 'mathjs, from atomic weights'),
    },
    {
      what: 'moles of HCl that one mole of Na2CO3 takes up',
      value: 2,
      unit: 'mol',
      mark: 'published',
      within: 1e-9,
      because: 'exact',
      ours: () => constants.molarMassNa2CO3.value / alkaliMass(1, 'Na2CO3'),
    },
    {
      what: 'HCl in a US gallon of acid of 31.45%, specific gravity 1.160',
      ...ofGallon(3.045),
      ours: () => fromBase(gallon() * constants.molarMassHCl.value, 'lb'),
      second: byFormula('number(1 gallon * 1.160 kg/liter * 0.3145, lbm)', 'mathjs'),
    },
    {
      what: 'NaHCO3 that neutralizes that gallon',
      ...ofGallon(7.015),
      ours: () => fromBase(alkaliMass(gallon(), 'NaHCO3'), 'lb'),
      second: byFormula('number(1 gallon * 1.160 kg/liter * 0.3145, lbm) * 84.007 / 36.461', 'mathjs'),
    },
    {
      what: 'Na2CO3 that neutralizes that gallon',
      ...ofGallon(4.425),
      ours: () => fromBase(alkaliMass(gallon(), 'Na2CO3'), 'lb'),
      second: byFormula('number(1 gallon * 1.160 kg/liter * 0.3145, lbm) * 105.988 / 36.461 / 2', 'mathjs'),
    },
    {
      what: 'NaHCO3 for a pound of HCl',
      value: 2.304,
      unit: 'lb',
      mark: 'computed',
      ...printed(3),
      ours: () => alkaliMass(1, 'NaHCO3') / constants.molarMassHCl.value,
      second: byFormula('84.007 / 36.461', 'mathjs'),
    },
    {
      what: 'Na2CO3 for a pound of HCl',
      value: 1.4534,
      unit: 'lb',
      mark: 'computed',
      ...printed(4),
      ours: () => alkaliMass(1, 'Na2CO3') / constants.molarMassHCl.value,
      second: byFormula('105.988 / 2 / 36.461', 'mathjs'),
    },
    {
      what: 'that acid at 1 part to 9 of water, volumes added',
      value: 1,
      unit: 'mol/L',
      mark: 'computed',
      ...printed(2),
      ours: () => acidMoles(1, 1.16, 0.3145) / (1 + 9),
      second: byFormula('1.160 * 1000 * 0.3145 / 36.461 / 10', 'mathjs'),
    },
  ],
};
