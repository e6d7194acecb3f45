// npm run story: the seed story as its log tells it.
import { tellStory } from './tellStory.mjs';

console.log(tellStory());
