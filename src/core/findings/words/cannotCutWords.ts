import type { Finding } from '../finding.ts';
import { titles } from './titles.ts';

/** That a print cannot be cut yet, and why: "can’t be cut yet: Wrong unit?" */
export function cannotCutWords(findings: readonly Pick<Finding, 'code' | 'level'>[]): string {
	const stop = findings.find(({ level }) => level === 'stop');
	return `can’t be cut yet${stop ? `: ${titles[stop.code]}` : ''}`;
}
