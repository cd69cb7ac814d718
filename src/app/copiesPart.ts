// One file of the build: second copies of shows are made here, and shows put back from them.
export { copyShows } from './copyShows.ts';
export { letGoOfCopies } from '../storage/secondCopies.ts';
export { putBackLost } from './putBackLost.ts';
