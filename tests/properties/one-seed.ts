import fc from 'fast-check';

// A mutant must meet the same walls as the code that it is compared with, and is not worth a smaller example.
fc.configureGlobal({ seed: 20, endOnFailure: true });
