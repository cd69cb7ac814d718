import { type Length, mm } from '../length/length.ts';
import type { Board, GlazingMaterial } from '../settings/board.ts';
import type { Settings } from '../settings/settings.ts';
import type { RowWords } from './rowWords.ts';
import { namedOrAlike } from '../values/named.ts';

/** Glass of 2 mm and acrylic of 3 mm, as they are mostly sold for frames. Common practice. */
const glazingThickness: Readonly<Record<GlazingMaterial, Length>> = { glass: mm(2), acrylic: mm(3) };
/** A backing of 3 mm MDF. Common practice. */
const backingThickness = mm(3);

/** Weight of a square metre 1 mm thick, in kg. Glass: 2500 kg/m³ (EN 572-1); acrylic: 1190 kg/m³ (ISO 7823). */
export const glazingDensity: Readonly<Record<GlazingMaterial, number>> = { glass: 2.5, acrylic: 1.19 };
/** The same for board, paper and backing. MDF is 600 to 830 kg/m³, board about as much. Common practice. */
export const usualDensity = 0.7;

/** What lies in a frame before or behind the print. */
export interface Material {
	/** The name in the show's list; undefined where something usual stands for it. */
	readonly name: string | undefined;
	/** What it is in any case: `glass`, `acrylic`, `backing`. */
	readonly usual: string;
	readonly thickness: Length;
	/** Weight of a square metre 1 mm thick, in kg. */
	readonly density: number;
	/** Whether the show says how thick it is. */
	readonly isKnown: boolean;
}

/** The glazing and the backing of a row; undefined where it has none. */
export interface RowMaterials {
	readonly glazing: Material | undefined;
	readonly backing: Material | undefined;
}

/**
 * The glazing and the backing that a row's cells name. Blank: with a frame the first of the list, without one none.
 * `glass` and `acrylic` are the first of the list that is so. Where the list has nothing, something usual stands for it.
 * @param hasFrame whether the row has a frame
 */
export function findMaterials({ texts, ...words }: RowWords, hasFrame: boolean, settings: Settings): RowMaterials {
	const isGlazed = texts.glazing === '' ? hasFrame : words.glazing !== 'none';
	const isBacked = texts.backing === '' ? hasFrame : words.backing !== 'none';
	return {
		glazing: isGlazed ? glazingOf(texts.glazing, words.glazing === 'acrylic', settings) : undefined,
		backing: isBacked ? backingOf(texts.backing, settings) : undefined,
	};
}

function glazingOf(text: string, isAcrylic: boolean, { glazing: list }: Settings): Material {
	const material = isAcrylic ? 'acrylic' : 'glass';
	const first = text === '' ? list[0] : list.find((each) => each.material === material);
	const listed = namedOrAlike(text, list) ?? first;
	const of = listed?.material ?? material;
	return materialOf(listed, of, glazingThickness[of], glazingDensity[of]);
}

const backingOf = (text: string, { backing: list }: Settings): Material =>
	materialOf(
		namedOrAlike(text, list) ?? (text === '' ? list[0] : undefined),
		'backing',
		backingThickness,
		usualDensity,
	);

const materialOf = (listed: Board | undefined, usual: string, thickness: Length, density: number): Material => ({
	name: listed?.name,
	usual,
	thickness: listed?.thickness ?? thickness,
	density: listed?.density ?? density,
	isKnown: listed?.thickness !== undefined,
});
