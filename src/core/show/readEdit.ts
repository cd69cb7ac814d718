import { isRecord } from '../values/isRecord.ts';
import { nestingProblem } from '../values/nesting.ts';
import type { Edit } from './edit.ts';
import { everyPart } from './everyPart.ts';
import type { Part } from './parts.ts';

/**
 * An edit as it was kept, by who knows which version of the app.
 * @returns undefined where it is none that can be made: it then changes nothing
 */
export function readEdit(kept: unknown): Edit | undefined {
	if (!isRecord(kept) || typeof kept['label'] !== 'string' || !Array.isArray(kept['rows'])) return undefined;
	const { label: _label, exchange, focus, ...diffs } = kept;
	const known = new Map(everyPart);
	const isRight = Object.entries(diffs).every(([name, diff]) => {
		const part = known.get(name);
		return part !== undefined && (diff === undefined || isDiff(part, diff));
	});
	if (!isRight || (exchange !== undefined && !isExchange(exchange))) return undefined;
	if (focus !== undefined && (!isRecord(focus) || nestingProblem(focus) !== undefined)) return undefined;
	return kept as unknown as Edit;
}

/** Whether every value that a diff names is one of its part, by the way in which that is written to files and read. */
function isDiff(part: Part<unknown, unknown>, diff: unknown): boolean {
	const sides = part.sides(diff);
	try {
		return sides?.every((value) => value === part.nothing || 'value' in part.read(part.write(value))) ?? false;
	} catch {
		return false; // what is damaged may not even be written
	}
}

const isExchange = (exchange: unknown): boolean =>
	isRecord(exchange) &&
	Object.entries(exchange).every(([side, id]) => ['before', 'after'].includes(side) && typeof id === 'string');
