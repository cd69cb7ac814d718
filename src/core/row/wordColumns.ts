import { mountOfFrame, mountOfShow } from '../settings/frame.ts';
import { surfaceWords } from '../settings/paper.ts';
import type { Settings } from '../settings/settings.ts';
import type { ColumnName } from '../show/columns.ts';
import { paperSizes } from '../length/paperSizes.ts';
import { glazingWords, mountingWords, signedOnWords } from './rowWords.ts';
import { stageWords } from './rowStage.ts';

/** What a column of words may say. */
export interface WordColumn {
	/** The words that are offered, those of the show first. */
	readonly choices: (settings: Settings) => readonly string[];
	/**
	 * Whether another word means nothing there, and is `not-read`, where there is any choice; else a size, or a name that is listed later, may stand there. */
	readonly isClosed: boolean;
	/** What one of the words is called, with its article: "a surface". */
	readonly word: string;
}

/** Two entries of one name are one thing in two sizes. */
const namesOf = (list: readonly { readonly name: string }[]) => [...new Set(list.map(({ name }) => name))];

const boardNames = ({ boards }: Settings): readonly string[] => namesOf(boards);
const sizeNames = ({ sizes }: Settings): readonly string[] => namesOf(sizes);

/** The paper sizes that printers hold, by the unit of the show. */
const usualPapers = ({ unit }: Settings): readonly string[] =>
	paperSizes
		.map(({ name }) => name)
		.filter((name) => (unit === 'in' ? /^(?:Letter|Tabloid|ANSI [CDE])$/ : /^A(?:[0-5]|3\+)$/).test(name));

/**
 * The columns of words, each with its choices: the list in the grid and on a phone, and what is read there, follow from
 * it. Choices that hold without a show are the words that the reading knows.
 */
export const wordColumns: Readonly<Partial<Record<ColumnName, WordColumn>>> = {
	paper: {
		choices: (settings) => [...namesOf(settings.papers), ...sizeNames(settings), ...usualPapers(settings)],
		isClosed: false,
		word: 'a size',
	},
	surface: { choices: () => surfaceWords, isClosed: true, word: 'a surface' },
	mount: {
		choices: (settings) => [...sizeNames(settings), mountOfShow, mountOfFrame, 'fit', 'none'],
		isClosed: false,
		word: 'a size',
	},
	board: { choices: boardNames, isClosed: false, word: 'a board' },
	'inner board': { choices: boardNames, isClosed: false, word: 'a board' },
	frame: {
		choices: ({ frames }) => [...namesOf(frames), 'none'],
		isClosed: false,
		word: 'a frame',
	},
	glazing: { choices: ({ glazing }) => [...namesOf(glazing), ...glazingWords], isClosed: true, word: 'a glazing' },
	backing: { choices: ({ backing }) => [...namesOf(backing), 'none'], isClosed: true, word: 'a backing' },
	mounting: { choices: () => mountingWords, isClosed: true, word: 'a mounting' },
	wall: { choices: ({ walls }) => namesOf(walls), isClosed: true, word: 'a wall' },
	stage: { choices: () => stageWords, isClosed: false, word: 'a stage' },
	'signed on': { choices: () => signedOnWords, isClosed: true, word: 'a place to sign' },
};
