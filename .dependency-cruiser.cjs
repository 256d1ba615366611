const order = [
  'spreadsheet',
  'quantity',
  'rules',
  'trace',
  'walls',
  'govern',
  'estimate',
  'hazards',
  'alternates',
  'actuals',
];
/** A folder of the core may use itself and the folders before it. */
const inward = order.map((folder, place) => ({
  name: `${folder}-looks-inward`,
  severity: 'error',
  from: { path: `^src/${folder}/` },
  to: { path: '^src/', pathNot: `^src/(${order.slice(0, place + 1).join('|')})/` },
}));
const outer = ['review', 'site'].map((folder) => ({
  name: `${folder}-looks-inward`,
  severity: 'error',
  from: { path: `^src/${folder}/` },
  to: { path: '^src/', pathNot: `^src/(${[...order, folder].join('|')})/` },
}));
/** What each room of the pane may use beside itself; the root puts the rooms together. */
const rooms = {
  workbook: [],
  shared: ['workbook'],
  pictures: ['shared', 'workbook'],
  actuals: ['shared', 'workbook'],
  progress: ['actuals', 'shared', 'workbook'],
  'set-up': ['shared', 'workbook'],
  decisions: ['shared', 'workbook'],
  steps: ['actuals', 'pictures', 'progress', 'shared', 'workbook'],
  cautions: ['shared', 'workbook'],
  review: ['shared', 'workbook'],
  rates: ['actuals', 'shared', 'workbook'],
  'where-from': ['shared', 'workbook'],
};
const paneRooms = Object.entries(rooms).map(([room, used]) => ({
  name: `${room}-keeps-to-its-room`,
  severity: 'error',
  from: { path: `^taskpane/${room}/` },
  to: { path: '^taskpane/', pathNot: `^taskpane/(${[room, ...used].join('|')})/` },
}));

module.exports = {
  forbidden: [
    ...inward,
    ...outer,
    ...paneRooms,
    {
      name: 'core-knows-no-host',
      severity: 'error',
      from: { path: '^src/' },
      to: { pathNot: '^src/' },
    },
    {
      name: 'functions-know-the-core-alone',
      severity: 'error',
      from: { path: '^functions/' },
      to: { path: '^(taskpane|workbench|tests|node_modules)/' },
    },
    {
      name: 'pane-knows-no-workbench',
      severity: 'error',
      from: { path: '^taskpane/' },
      to: { path: '^(workbench|tests)/' },
    },
    {
      name: 'commands-know-no-page',
      severity: 'error',
      from: { path: '^workbench/(xlsx|engine|estimate|rates|demo|serve)/' },
      to: { path: '^workbench/page/' },
    },
    {
      name: 'scripts-are-used-by-nobody',
      severity: 'error',
      from: { path: '^(src|functions|taskpane|workbench)/' },
      to: { path: '^scripts/' },
    },
    {
      name: 'shipped-code-takes-no-development-package',
      severity: 'error',
      from: { path: '^(src|functions|taskpane)/' },
      to: { dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'] },
    },
    {
      name: 'shipped-code-runs-in-a-browser',
      severity: 'error',
      from: { path: '^(functions|taskpane)/' },
      to: { dependencyTypes: ['core'] },
    },
    { name: 'no-circles', severity: 'error', from: {}, to: { circular: true } },
    { name: 'no-loose-ends', severity: 'error', from: {}, to: { couldNotResolve: true } },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    // An import of a type alone is an arrow too, though nothing of it is left in the built code.
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.cjs', '.css'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
    },
  },
};
