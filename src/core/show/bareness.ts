import { namedSize } from '../length/paperSizes.ts';
import type { NamedSize } from '../length/size.ts';
import { tokenize } from '../length/tokens.ts';
import { type ColumnName, hasUnit, kindOf } from './columns.ts';

/**
 * What of a cell's text hangs on a unit that it does not name: a bare number, or a bare fraction. Undefined where it
 * names its unit, where it is a listed name or a word, and where it is no length at all.
 */
export function barenessOf(
	column: ColumnName,
	text: string | undefined,
	sizes: readonly NamedSize[],
): 'number' | 'fraction' | undefined {
	if (text === undefined || !hasUnit(column)) return undefined;
	const kind = kindOf(column);
	if ((kind === 'size' || kind === 'mount') && namedSize(text, sizes) !== undefined) return undefined;
	const { tokens } = tokenize(text);
	if (tokens.some((token) => ['unit', 'per cent', 'unknown', 'colon'].includes(token.kind))) return undefined;
	if (!tokens.some((token) => token.kind === 'number' || token.kind === 'unsure number')) return undefined;
	return tokens.some((token) => token.kind === 'slash') ? 'fraction' : 'number';
}
