import { heldToGoals } from './held-to-goals.ts';

heldToGoals(['heel', 'foot', 'foot without gyroscope'], 6);
