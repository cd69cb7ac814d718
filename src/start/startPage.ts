/** The section of the page that is there before the app is, and that speaks where the app cannot (`index.html`). */
const section = () => document.querySelector<HTMLElement>('#start');

/** Whether the app has not begun yet. */
export const isStarting = (): boolean => section()?.hidden === false;

/** The app is on the screen: the section goes, unless it has had something to say. */
export function appIsThere(): void {
	const start = section();
	if (start && !start.classList.contains('has-problem')) start.hidden = true;
}

/** Says in the page itself why there is no app. What was said first stands: the rest follows from it. */
export function tellInPage(sentence: string): void {
	const start = section();
	if (!start && document.readyState === 'loading')
		addEventListener('DOMContentLoaded', () => tellInPage(sentence), { once: true });
	if (!start || start.classList.contains('has-problem')) return;
	start.hidden = false;
	start.classList.add('has-problem');
	const words = start.querySelector('.words')!;
	words.setAttribute('role', 'alert');
	words.textContent = sentence;
}

/** What was said no longer holds; where something else was said, that stays. */
export function takeBackInPage(sentence: string): void {
	const start = section();
	if (start?.querySelector('.words')?.textContent !== sentence) return;
	start.classList.remove('has-problem');
	appIsThere();
}
