import { config } from 'zod';

// The page's policy allows no code made from text; a library that tries and falls back would be complained of. Must come before any schema.
config({ jitless: true });
