import { tick } from 'svelte';

/**
 * Has a field show what is kept, once what was typed into it has been handed up: that may have been read otherwise, or
 * wait for an answer, and be dropped then.
 * @param kept what is kept by then
 */
export async function asKept(field: Element & { value: string }, kept: () => string): Promise<void> {
	await tick();
	if (field.isConnected) field.value = kept();
}
