import { screens } from '../harness/screens.ts';
import { onScreens } from './onScreens.ts';

// Two files, so that both cores of a small machine have their half of the screens.
onScreens(screens.slice(0, screens.length / 2));
