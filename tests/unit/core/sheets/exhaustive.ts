import type { PackingJob } from '../../../../src/core/sheets/packingJob.ts';
import type { Stock } from '../../../../src/core/stock/stock.ts';

// The best plan by looking at every one: each way to share the blanks out over pieces of stock, and each way to cut a
// piece at every whole millimetre. It shares nothing with the solver, and is for a handful of blanks on tiny sheets.

interface Sides {
	readonly width: number;
	readonly height: number;
}

/** Whether a piece can be cut into these blanks, at whole millimetres. */
function canCut(blanks: readonly Sides[], stock: Stock): (set: number) => boolean {
	const known = new Map<string, boolean>();
	const isAlong = (width: number, height: number) =>
		stock.grain === undefined || width === height || stock.grain === (width > height ? 'width' : 'height');
	const fits = (width: number, height: number, across: number, down: number) =>
		isAlong(width, height) &&
		(stock.kind === 'blank' ? width === across && height === down : width <= across && height <= down);
	const cut = (set: number, across: number, down: number): boolean => {
		if (set === 0) return true;
		const key = `${set} ${across} ${down}`;
		const before = known.get(key);
		if (before !== undefined) return before;
		const result = tryCut(set, across, down);
		known.set(key, result);
		return result;
	};
	const tryCut = (set: number, across: number, down: number): boolean => {
		if ((set & (set - 1)) === 0) {
			const { width, height } = blanks[31 - Math.clz32(set)]!;
			return fits(width, height, across, down) || fits(height, width, across, down);
		}
		if (stock.kind === 'blank') return false;
		for (let part = (set - 1) & set; part > 0; part = (part - 1) & set) {
			for (let at = 1; at < across; at++) if (cut(part, at, down) && cut(set ^ part, across - at, down)) return true;
			for (let at = 1; at < down; at++) if (cut(part, across, at) && cut(set ^ part, across, down - at)) return true;
		}
		return false;
	};
	const toMm = (length: number) => length / 10_000_000;
	const trim = 2 * stock.trim;
	return (set) => cut(set, toMm(stock.width - trim), toMm(stock.height - trim));
}

/** The least cost, and the fewest pieces of stock at that cost; undefined where the stock is not enough. */
export function bestByLookingAtAll({ blanks, stock }: PackingJob): { cost: number; count: number } | undefined {
	const sides = blanks.map(({ width, height }) => ({ width: width / 10_000_000, height: height / 10_000_000 }));
	const cutters = stock.map((entry) => canCut(sides, entry));
	const used = stock.map(() => 0);
	let best: { cost: number; count: number } | undefined;
	const share = (left: number): void => {
		if (left === 0) {
			const cost = stock.reduce((sum, { price = 0, pack }, place) => sum + Math.ceil(used[place]! / pack) * price, 0);
			const count = used.reduce((sum, pieces) => sum + pieces, 0);
			if (best === undefined || cost < best.cost || (cost === best.cost && count < best.count)) best = { cost, count };
			return;
		}
		const first = left & -left;
		const others = left ^ first;
		for (let part = others; ; part = (part - 1) & others) {
			for (const [place, { count }] of stock.entries()) {
				if (used[place]! >= (count ?? Infinity) || !cutters[place]!(part | first)) continue;
				used[place]!++;
				share(others ^ part);
				used[place]!--;
			}
			if (part === 0) break;
		}
	};
	share(2 ** blanks.length - 1);
	return best;
}
