import { capital } from '../../values/capital.ts';
import { isSame } from '../../length/length.ts';
import { listed } from '../../values/listed.ts';
import { shownText } from '../../values/shownText.ts';
import type { CutBorder, FiguresByCode } from '../figures.ts';
import type { Borders, Sides } from '../measure.ts';
import type { Say } from './say.ts';

// The parts of the sentences of findings that several of them have, or that would make one too long to read.

export const openWays = {
	shape: 'or one of them and the shape',
	window: 'or the window',
	'window or mount': 'the window, or the mount',
	any: 'or the shape with one of them, the window, or the mount',
} as const satisfies Record<(FiguresByCode['needs-size'] & { kind: 'open' })['or'], string>;

/** The same where one side of the picture is known. */
export const openWaysOfOne = {
	...openWays,
	shape: 'or the shape',
	any: 'or the shape, the window, or the mount',
} as const;

export const sum = (parts: readonly number[], { figure }: Say): string => parts.map(figure).join(' + ');

export const moreOrLess = (more: number, { figure }: Say): string =>
	`${figure(Math.abs(more))} ${more > 0 ? 'more' : 'less'}`;

export function coverWords(
	{ overlap, reveal, signingSpace }: FiguresByCode['adds-up'] & { kind: 'cover' },
	{ figure, say }: Say,
): string {
	const sides = reveal === undefined ? `overlap ${figure(overlap!)} a side` : `reveal ${figure(reveal)} a side`;
	return signingSpace === undefined ? sides : `${sides}, signing space ${say(signingSpace)}`;
}

export function mountLimit({ kind, mount, limit, within }: FiguresByCode['over-limit'], { say, size }: Say): string {
	const rule = { largest: 'the largest allowed is', smallest: 'the smallest allowed is', exact: 'the rules ask for' }[
		kind
	];
	const tolerance = within === undefined ? '' : ` ± ${say(within)}`;
	return `The mount is ${size(mount)}; ${rule} ${size(limit)}${tolerance}, either way round.`;
}

/** "is 20 mm over “Rain” and 30 mm over the door", "stands on the floor". */
export function overlapWords(overlaps: FiguresByCode['hangs-over']['overlaps'], { say }: Say): string {
	const isOnFloor = overlaps.some((found) => found.kind === 'floor' && isSame(found.under, 0));
	const measured = overlaps.flatMap((found) => {
		switch (found.kind) {
			case 'print':
				return `${say(found.by)} over “${shownText(found.other.said)}”`;
			case 'obstacle':
				return `${say(found.by)} over the ${shownText(found.other.said)}`;
			case 'floor':
				return isSame(found.under, 0) ? [] : `${say(found.under)} under the floor`;
			case 'top':
				return `${say(found.over)} over the height of ${say(found.height)}`;
		}
	});
	return [
		...(measured.length > 0 ? [`is ${listed(measured)}`] : []),
		...(isOnFloor ? ['stands on the floor'] : []),
	].join(' and ');
}

/** "12.4 kg": a decimal, and none where it is nothing. */
export const kilograms = (kg: number): string => `${Number(kg.toFixed(1))} kg`;

export const wayOf = ({ width, height }: Sides) => (width > height ? 'landscape' : 'portrait');

export function bordersAre(borders: Borders, { figure }: Say): string {
	const words = Object.entries(borders).map(([border, value]) => `${border} ${figure(value)}`);
	return `${capital(listed(words))} ${words.length > 1 ? 'are' : 'is'}`;
}

export const cutWords = ({ of, border, length, setting }: CutBorder, { figure }: Say): string =>
	`${of === 'mount' ? '' : `the ${of}’s `}${border} ${figure(length)}${setting === undefined ? '' : `, the guide set to ${figure(setting)}`}`;

/** A share in whole per cent, or with a decimal or two where it would look like no more than what is allowed. */
export function percentAbove(percent: number, allowed: number): number {
	const rounded = [0, 1].map((places) => Number(percent.toFixed(places))).find((each) => each > allowed);
	return rounded ?? Math.ceil(percent * 100) / 100;
}

/** Two areas that differ, with as many decimals as show that: whole ones of cm² or in² if they do. */
export function areasApart(areaMm2: number, otherMm2: number, unit: Say['unit']): readonly [string, string] {
	const one = unit === 'in' ? 25.4 ** 2 : 100;
	const words = (mm2: number, places: number) =>
		`${Number((mm2 / one).toFixed(places))} ${unit === 'in' ? 'in' : 'cm'}²`;
	let places = 0;
	while (places < 5 && words(areaMm2, places) === words(otherMm2, places)) places++;
	return [words(areaMm2, places), words(otherMm2, places)];
}
