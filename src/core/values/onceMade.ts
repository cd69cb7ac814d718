/**
 * What is made when it is first wanted, and once. The browser's formats and sequences of a language take up to 20 ms to
 * make: as the app starts, the first key would wait for them.
 */
export function onceMade<Value>(make: () => Value): () => Value {
	let made: { readonly value: Value } | undefined;
	return () => (made ??= { value: make() }).value;
}
