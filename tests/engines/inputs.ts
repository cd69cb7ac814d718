/** One device and what it does, in the words of the WebDriver standard, which both protocols speak. */
export type InputSource =
	| { readonly type: 'key'; readonly id: string; readonly actions: readonly KeyAction[] }
	| {
			readonly type: 'pointer';
			readonly id: string;
			readonly parameters: { readonly pointerType: 'mouse' | 'touch' };
			readonly actions: readonly PointerAction[];
	  };

interface KeyAction {
	readonly type: 'keyDown' | 'keyUp';
	readonly value: string;
}

type PointerAction =
	| { readonly type: 'pointerMove'; readonly x: number; readonly y: number }
	| { readonly type: 'pointerDown' | 'pointerUp'; readonly button: 0 };

/** Keys that give no sign; the code points are those of the WebDriver standard, "Keyboard actions". */
const keys = {
	Tab: '\uE004',
	Enter: '\uE007',
	Shift: '\uE008',
	Control: '\uE009',
	Escape: '\uE00C',
	End: '\uE010',
	Home: '\uE011',
	F2: '\uE032',
} as const;

/** A key that gives no sign. */
export type Key = keyof typeof keys;

const stroke = (value: string): readonly KeyAction[] => [
	{ type: 'keyDown', value },
	{ type: 'keyUp', value },
];

/** The keyboard types a text. */
export const typing = (text: string): InputSource => ({
	type: 'key',
	id: 'keyboard',
	actions: [...text].flatMap(stroke),
});

/** The keyboard presses keys, all of them held until the last is down. */
export const pressing = (...chord: readonly Key[]): InputSource => ({
	type: 'key',
	id: 'keyboard',
	actions: [
		...chord.map((key): KeyAction => ({ type: 'keyDown', value: keys[key] })),
		...chord.toReversed().map((key): KeyAction => ({ type: 'keyUp', value: keys[key] })),
	],
});

/** The mouse clicks at a place of the window, in its pixels. */
export const clicking = (x: number, y: number): InputSource => ({
	type: 'pointer',
	id: 'mouse',
	parameters: { pointerType: 'mouse' },
	actions: [
		{ type: 'pointerMove', x: Math.round(x), y: Math.round(y) },
		{ type: 'pointerDown', button: 0 },
		{ type: 'pointerUp', button: 0 },
	],
});
