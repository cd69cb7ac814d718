/** The address of the solver's WebAssembly, as the build puts it down. */
declare module 'highs/runtime?url' {
	const address: string;
	// oxlint-disable-next-line house/named-exports -- the build tool exports addresses so
	export default address;
}
