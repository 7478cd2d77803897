import { heldToGoals } from './held-to-goals.ts';

heldToGoals(['platform'], 2);
