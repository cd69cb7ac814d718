import { surfaceWords } from '../settings/paper.ts';
import type { ColumnName } from '../show/columns.ts';
import type { Row } from '../show/row.ts';
import { isSameWord } from '../values/words.ts';
import { type Edition, parseEdition } from './edition.ts';
import type { NamedFrame } from './namedFrame.ts';
import { type Stage, stageWords } from './rowStage.ts';

/** The words that `signed on` may hold. */
export const signedOnWords = ['picture', 'margin', 'back', 'mount'] as const;
/** The words that `glazing` may hold. */
export const glazingWords = ['none', 'glass', 'acrylic'] as const;

/** The words that `mounting` may hold. */
export const mountingWords = ['window', 'float'] as const;

/** What the cells of words say; undefined where they are blank or say something else, which `unreadWords` names. */
export interface RowWords {
	readonly signedOn: (typeof signedOnWords)[number] | undefined;
	readonly surface: (typeof surfaceWords)[number] | undefined;
	/** Blank or another name: glass, but none where the row has no frame. */
	readonly glazing: (typeof glazingWords)[number];
	/** Blank or another name: some backing. */
	readonly backing: 'none' | undefined;
	/** What the cells of materials say, in small letters. */
	readonly texts: { readonly glazing: string; readonly backing: string };
	readonly edition: Edition | undefined;
	readonly stage: Stage | undefined;
}

/**
 * Reads the cells of a row that hold words.
 * @param paperSurface the surface of its paper, for a row that types none
 */
export function readWords(row: Row, { isUnframed }: NamedFrame, paperSurface?: string): RowWords {
	const text = (column: ColumnName) => row.typed[column]?.trim().toLowerCase() ?? '';
	const oneOf = <Word extends string>(column: ColumnName, words: readonly Word[], otherwise?: string) => {
		const typed = row.typed[column] ?? otherwise;
		return typed === undefined ? undefined : words.find((word) => isSameWord(word, typed));
	};
	return {
		signedOn: oneOf('signed on', signedOnWords),
		surface: oneOf('surface', surfaceWords, paperSurface),
		glazing: oneOf('glazing', glazingWords) ?? (text('glazing') === '' && isUnframed ? 'none' : 'glass'),
		backing: text('backing') === 'none' ? 'none' : undefined,
		texts: { glazing: text('glazing'), backing: text('backing') },
		edition: parseEdition(text('edition')),
		stage: oneOf('stage', stageWords),
	};
}
