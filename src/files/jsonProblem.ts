type Expected = 'value' | 'value or ]' | 'key' | 'key or }' | ':' | ', or ]' | ', or }' | 'the end';

/**
 * Where a text stops being JSON, in words: engines differ in whether they say it. Signs are looked at one by one, for
 * a pattern that runs over a text of megabytes may run out of stack.
 * @returns undefined if the text is JSON
 */
export function jsonProblem(text: string): string | undefined {
	const open: ('{' | '[')[] = [];
	let expected: Expected = 'value';
	for (let at = pastBlanks(text, 0); ; at = pastBlanks(text, at)) {
		if (at >= text.length)
			return expected === 'the end' ? undefined : `it breaks off in line ${lineAt(text, text.length)}`;
		const sign = signs.includes(text[at]!) ? text[at] : undefined;
		const isString = text[at] === '"';
		const end = sign !== undefined ? at + 1 : isString ? endOfString(text, at) : endOfLiteral(text, at);
		const next: Expected | undefined = end === undefined ? undefined : after(sign, isString, expected, open);
		if (end === undefined || next === undefined) return problemAt(text, at, expected);
		expected = next;
		at = end;
	}
}

const signs = '{}[],:';

function pastBlanks(text: string, start: number): number {
	let at = start;
	while (at < text.length && '\t\n\r '.includes(text[at]!)) at++;
	return at;
}

const escape = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;
const literal = /(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)/y;

/** Where a string ends that begins at a place; undefined where it does not, or holds what a string cannot. */
function endOfString(text: string, start: number): number | undefined {
	for (let at = start + 1; at < text.length;) {
		const code = text.charCodeAt(at);
		if (code === 0x22) return at + 1;
		if (code < 0x20) return undefined;
		if (code !== 0x5c) {
			at++;
			continue;
		}
		escape.lastIndex = at;
		if (!escape.test(text)) return undefined;
		at = escape.lastIndex;
	}
	return undefined;
}

/** Where a number or a word ends that begins at a place; undefined where it is none. */
function endOfLiteral(text: string, start: number): number | undefined {
	literal.lastIndex = start;
	return literal.test(text) ? literal.lastIndex : undefined;
}

/** What may stand after a token; undefined if the token itself may not stand here. */
function after(
	sign: string | undefined,
	isString: boolean,
	expected: Expected,
	open: ('{' | '[')[],
): Expected | undefined {
	const afterValue = (): Expected => {
		const around = open.at(-1);
		return around === undefined ? 'the end' : around === '{' ? ', or }' : ', or ]';
	};
	const isValueExpected = expected === 'value' || expected === 'value or ]';
	if (sign === undefined) {
		if (isValueExpected) return afterValue();
		return isString && (expected === 'key' || expected === 'key or }') ? ':' : undefined;
	}
	if (sign === '{' || sign === '[') {
		if (!isValueExpected) return undefined;
		open.push(sign);
		return sign === '{' ? 'key or }' : 'value or ]';
	}
	if (sign === ':') return expected === ':' ? 'value' : undefined;
	if (sign === ',') return expected === ', or ]' ? 'value' : expected === ', or }' ? 'key' : undefined;
	if (!expected.endsWith(` ${sign}`)) return undefined;
	open.pop();
	return afterValue();
}

function problemAt(text: string, at: number, expected: Expected): string {
	const found = text.slice(at, at + 12).split('\n')[0]!;
	return `it is damaged in line ${lineAt(text, at)}: “${found}” stands where ${words[expected]} should`;
}

const words: Readonly<Record<Expected, string>> = {
	value: 'a value',
	'value or ]': 'a value or ]',
	key: 'a name in quotes',
	'key or }': 'a name in quotes or }',
	':': 'a colon',
	', or ]': 'a comma or ]',
	', or }': 'a comma or }',
	'the end': 'the end of the file',
};

const lineAt = (text: string, at: number): number => text.slice(0, at).split(/\r\n|\r|\n/).length;
