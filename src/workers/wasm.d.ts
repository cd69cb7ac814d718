/** The address of the solver's WebAssembly, as the build puts it down. */
declare module 'highs/runtime?url' {
	const address: string;
	// eslint-disable-next-line no-restricted-syntax -- the build tool exports addresses so
	export default address;
}
