import { screens } from '../harness/screens.ts';
import { onScreens } from './onScreens.ts';

onScreens(screens.slice(screens.length / 2));
