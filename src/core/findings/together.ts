import type { Scale } from '../length/formatLength.ts';
import type { Finding, Mend } from './finding.ts';
import { isOfAxes, sentenceOfBoth } from './words/bothInWords.ts';

/** What screens and paper say at once: a finding, or the two of one code that differ only by axis. */
export interface Said extends Pick<Finding, 'code' | 'level' | 'cells' | 'message' | 'mends'> {
	/** What is said: in files and in what is accepted they stay apart, one for each axis. */
	readonly findings: readonly Finding[];
}

/** Mends offered of each axis, where none mends both. */
const mostOfEach = 3;

/** Findings of a row as they are said: one cause is said once, though both axes are wrong. They keep their order. */
export function saidTogether(findings: readonly Finding[], scale: Scale): readonly Said[] {
	const said: Said[] = [];
	const isShort = findings.some(({ code, level }) => code === 'paper-short' && level === 'stop');
	const isThrough = !isShort && findings.some(({ code }) => code === 'falls-through');
	for (const finding of findings) {
		// A paper that the window is as large as reaches too little under the mount: that is the same cause.
		if (isThrough && finding.code === 'paper-short') continue;
		const last = said.at(-1);
		const [across] = last?.findings ?? [];
		const isSecond = across !== undefined && across.code === finding.code && across.level === finding.level;
		if (isSecond && isOfAxes(finding.code)) said[said.length - 1] = bothOf(across, finding, scale);
		else said.push(alone(finding));
	}
	return said;
}

/** The gravest of them, in its sentence; undefined where nothing is found. */
export const gravestWords = (findings: readonly Finding[], scale: Scale): string | undefined =>
	saidTogether(findings, scale)[0]?.message;

const alone = (finding: Finding): Said => ({
	code: finding.code,
	level: finding.level,
	cells: finding.cells,
	get message() {
		return finding.message;
	},
	get mends() {
		return finding.mends;
	},
	findings: [finding],
});

function bothOf(across: Finding, down: Finding, scale: Scale): Said {
	return {
		code: across.code,
		level: across.level,
		cells: [...across.cells, ...down.cells],
		get message() {
			return sentenceOfBoth(across.code, across.figures, down.figures, scale);
		},
		get mends() {
			return mendsOfBoth(across.mends, down.mends);
		},
		findings: [across, down],
	};
}

/** The mends after which neither is left; where there is none, those of each. */
function mendsOfBoth(across: readonly Mend[], down: readonly Mend[]): readonly Mend[] {
	const labels = new Set(down.map(({ label }) => label));
	const ofBoth = across.filter(({ label }) => labels.has(label));
	if (ofBoth.length > 0) return ofBoth;
	return [across, down].flatMap((mends) => mends.slice(0, mostOfEach));
}
