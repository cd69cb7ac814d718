import type { Scale } from '../length/formatLength.ts';
import type { Finding, Mend } from './finding.ts';
import type { Found } from './found.ts';
import { sentenceOf } from './words/inWords.ts';

/** A finding, of what was found. Figures, sentence and mends are made when they are first asked for. */
export function findingOf(found: Omit<Found, 'candidates'>, scale: Scale, mends: () => readonly Mend[]): Finding {
	const { code, level, cells } = found;
	let figures: Finding['figures'] | undefined;
	let message: string | undefined;
	let tried: readonly Mend[] | undefined;
	return {
		code,
		level,
		cells,
		get figures() {
			return (figures ??= found.figures());
		},
		get message() {
			return (message ??= sentenceOf(code, this.figures, scale));
		},
		get mends() {
			return (tried ??= mends());
		},
	};
}
