import { heldToGoals } from './held-to-goals.ts';

heldToGoals(['trunk'], 2);
