import type { Attachment } from 'svelte/attachments';

/**
 * Has a field show what is kept: also once what was typed into it has been handed up, for that may have been read otherwise,
 * or wait for an answer and be dropped then. While somebody types into it, it stays as it is: what comes from another tab
 * would take away what is half typed.
 * @param kept what is kept; read again as it changes
 */
export function held(kept: () => string): Attachment<HTMLInputElement | HTMLSelectElement> {
	let isBegun = false;
	return (field) => {
		const text = kept();
		if (!isBegun) field.value = text;
		field.oninput = () => (isBegun = true);
		field.onblur = () => (isBegun = false);
		// With Enter what was typed is handed up, and the field may be asked for the next one.
		field.onkeydown = ({ key }) => {
			if (key === 'Enter') isBegun = false;
		};
		field.onchange = () => {
			isBegun = false;
			setTimeout(() => field.isConnected && (field.value = kept())); // after all that hears of it
		};
	};
}
