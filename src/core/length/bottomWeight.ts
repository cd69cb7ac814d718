import type { Length } from './length.ts';

/**
 * How much wider the bottom border is than the top: a share of the top (an exact fraction: 12 % is 12/100),
 * a length, or what the optical centre asks. No weight is a share of 0.
 */
export type BottomWeight =
	| { readonly kind: 'share'; readonly numerator: number; readonly denominator: number }
	| { readonly kind: 'length'; readonly more: Length }
	| { readonly kind: 'optical centre' };
