import type { Session } from '../app/session.svelte.ts';
import { changeSettings } from '../core/commands/changeSettings.ts';
import type { TypedSettings } from '../core/settings/settings.ts';

/** What every section of the settings types into. */
export interface SettingsForm {
	/** The settings as typed. */
	readonly typed: TypedSettings;
	/** What is wrong with a setting or anything in it, by its key. */
	readonly problemOf: (key: string) => string | undefined;
	/** Changes settings; undefined puts one back to its default. `label` is what undo calls it. */
	readonly change: (changes: TypedSettings, label: string) => void;
}

/** The settings of the show that is open, to be typed into. */
export const settingsForm = (session: Session): SettingsForm => ({
	get typed() {
		return session.show.settings;
	},
	problemOf(key) {
		const problems = session.settingsProblems.filter((each) => each.key === key || each.key.startsWith(`${key}.`));
		return problems.length > 0 ? problems.map(({ problem }) => problem).join('. ') : undefined;
	},
	change(changes, label) {
		session.do((show) => changeSettings(show, changes, label));
	},
});

/** A list as it is kept in the settings: an empty one is none. */
export const orNothing = <Item>(list: readonly Item[]): readonly Item[] | undefined =>
	list.length > 0 ? list : undefined;
