import { listed } from '../values/listed.ts';
import { type Currency, formatMoney, moneyWords } from '../values/money.ts';
import type { GetLine } from './getLine.ts';
import type { ToGet } from './whatToGet.ts';

/**
 * What each print costs, by its place in the show, in whole minor units; undefined where nothing that it takes has a price.
 * Those that are known add up to the total.
 */
export function printCosts({ lines, costs }: Pick<ToGet, 'lines' | 'costs'>): readonly (number | undefined)[] {
	const priced = new Set(lines.filter(({ cost }) => cost !== undefined).flatMap(({ taken }) => [...taken.keys()]));
	return costs.map((cost, place) => (cost > 0 || priced.has(place) ? cost : undefined));
}

/** A part of what a print costs. */
interface CostPart {
	readonly name: string;
	readonly cost: number;
}

/**
 * Why a print costs what it does, in sentences: its share of each line, and what has no price. Undefined where its cost is
 * not known. @param place of the print in the show, from 0
 */
export function costReason(toGet: ToGet, place: number, currency: Currency | undefined): string | undefined {
	const cost = printCosts(toGet)[place];
	if (cost === undefined) return undefined;
	const parts = costParts(toGet, place, cost).map((part) => `${formatMoney(part.cost, currency)} for ${part.name}`);
	const without = toGet.unpriced.filter(({ taken }) => taken.has(place)).map(({ name }) => name);
	const sum = `What it needs costs ${moneyWords(cost, currency)}${parts.length > 0 ? `: ${listed(parts)}` : ''}.`;
	return without.length === 0 ? sum : `${sum} No price yet for ${listed([...new Set(without)])}.`;
}

/** The parts of a print's cost: they add up to it, what is left by rounding goes to the greatest remainders. */
function costParts({ lines }: ToGet, place: number, whole: number): readonly CostPart[] {
	const own = lines.filter((line): line is GetLine & { cost: number } => !!line.cost && line.taken.has(place));
	const exact = own.map(({ name, cost, taken }) => {
		const all = [...taken.values()].reduce((sum, each) => sum + each, 0n);
		const share = BigInt(cost) * taken.get(place)!;
		return { name, cost: Number(share / all), rest: Number(((share % all) * 1_000_000n) / all) };
	});
	let left = whole - exact.reduce((sum, { cost }) => sum + cost, 0);
	const byRest = [...exact].sort((a, b) => b.rest - a.rest);
	const isShared = lines.some(({ cost, taken }) => !!cost && taken.size === 0);
	if (!isShared) {
		for (const part of byRest.slice(0, Math.max(0, left))) {
			part.cost++;
			left--;
		}
	}
	const shared = left > 0 ? [{ name: 'what all prints share', cost: left }] : [];
	return [...exact, ...shared].filter(({ cost }) => cost > 0).map(({ name, cost }) => ({ name, cost }));
}
