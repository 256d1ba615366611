/** A question of one cell, with the formula that answers it beside the sheet's own walls; a test works each out. */
export interface WhatIf {
  readonly ask: string;
  readonly formula: string;
}

/** One-cell what-ifs: an ordinary IF over the range, inside a Washdown formula. */
export const whatIfs: readonly WhatIf[] = [
  {
    ask: 'What would the bid be with granite wherever limestone is drawn?',
    formula: '=WASH.BIDPRICE(IF(Walls[#All]="Limestone","Granite",Walls[#All]),,Factors[#All])',
  },
  {
    ask: 'What does it save to lay Type N in place of Type S?',
    formula:
      '=WASH.BIDPRICE(Walls[#All],,Factors[#All])-WASH.BIDPRICE(IF(Walls[#All]="S","N",Walls[#All]),,Factors[#All])',
  },
  {
    ask: 'What would the labor-hours be with a team of three in place of two?',
    formula:
      '=WASH.LABORHOURS(Walls[#All],,IF((Factors[#All]=2)*(INDEX(Factors[#All],,1)="team.size"),3,Factors[#All]))',
  },
];
