declare module 'js-quantities' {
	/** Only what the tests use: a quantity, and its number in another unit. */
	export default function Qty(text: string): { to(unit: string): { readonly scalar: number } };
}
