/** How well a number is founded. One is never dressed as another. */
export type SourceKind =
  | 'published'
  | 'common practice'
  | 'from memory'
  | 'assumption'
  | 'yours to state'
  | 'override'
  | 'input'
  | 'computed';
