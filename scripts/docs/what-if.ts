/** A question of one cell, with the formula that answers it beside the sheet's own walls; a test works each out. */
export interface WhatIf {
  readonly ask: string;
  readonly formula: string;
}

/** One-cell what-ifs: an ordinary IF over the range, inside a Washdown formula. */
export const whatIfs: readonly WhatIf[] = [
  {
    ask: 'What would the bid be with granite in place of all limestone?',
    formula: '=WASH.BIDPRICE(IF(Walls[#All]="Limestone","Granite",Walls[#All]),,Factors[#All])',
  },
  {
    ask: 'What does Type N mortar save over Type S?',
    formula:
      '=WASH.BIDPRICE(Walls[#All],,Factors[#All])-WASH.BIDPRICE(IF(Walls[#All]="S","N",Walls[#All]),,Factors[#All])',
  },
  {
    ask: 'How many labor-hours would a team of three take, not two?',
    formula:
      '=WASH.LABORHOURS(Walls[#All],,IF((Factors[#All]=2)*(INDEX(Factors[#All],,1)="team.size"),3,Factors[#All]))',
  },
];
