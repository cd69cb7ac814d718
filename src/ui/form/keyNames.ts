const isApple = /Mac|iPad|iPhone/.test(navigator.userAgent);

/** What keys are called on this platform: the one for commands, the one beside it, and the one that deletes backwards. */
export const [held, alt, back] = isApple ? (['⌘', '⌥', '⌫'] as const) : (['Ctrl', 'Alt', 'Backspace'] as const);
