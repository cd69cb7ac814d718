import { isRecord } from '../values/isRecord.ts';
import { isAbsent, optionalSettings, type SettingContext, wordSetting } from './settingValue.ts';
import { labelCornerWords, labelNameWords, type Labels } from './labels.ts';

/** Reads what the show's rules ask of the labels on the back; blank: the name may stand there, in any corner. */
export function readLabels(value: unknown, context: SettingContext): Labels {
	const free: Labels = { name: 'free', corner: undefined };
	if (isAbsent(value)) return free;
	if (!isRecord(value)) {
		context.report('labels', 'not a record of a name and a corner');
		return free;
	}
	const read = optionalSettings<{ name: Labels['name']; corner: NonNullable<Labels['corner']> }>(
		value,
		'labels',
		context,
		{
			name: ['name', (typed) => wordSetting(typed, labelNameWords)],
			corner: ['corner', (typed) => wordSetting(typed, labelCornerWords)],
		},
	);
	return { ...free, ...read };
}
