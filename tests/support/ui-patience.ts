import { configure } from '@testing-library/preact';

// A second, its own choice, is short on a busy machine.
configure({ asyncUtilTimeout: 15_000 });
