import { takeMore } from './load-more';
import { moreRuns } from './more-runs';

takeMore(moreRuns);
