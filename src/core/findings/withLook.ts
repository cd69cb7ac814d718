import type { Finding } from './finding.ts';
import type { RowResult } from './rowResult.ts';

/** A result with a `look` that only shows between rows: behind the other looks, before the notes. */
export function withLook(result: RowResult, look: Finding): RowResult {
	const first = result.findings.findIndex(({ level }) => level === 'note');
	const at = first < 0 ? result.findings.length : first;
	return { ...result, findings: result.findings.toSpliced(at, 0, look) };
}
