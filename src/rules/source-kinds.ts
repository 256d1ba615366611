/** How well a number is founded. One is never dressed as another. */
export type SourceKind =
  'published' | 'common practice' | 'from memory' | 'assumption' | 'override' | 'input' | 'computed';
