/**
 * Plain data (texts, numbers, lists and records of such) without the proxies of a component, to be kept and sent to
 * workers. `$state.snapshot` would lose what a record holds under `__proto__`, which a list may well name a column.
 */
export function plainCopy<Value>(value: Value): Value {
	if (Array.isArray(value)) return value.map(plainCopy) as Value;
	if (typeof value !== 'object' || value === null) return value;
	return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, plainCopy(each)])) as Value;
}
