import { render } from 'preact';
import { watchUpdates } from './device/updates.ts';

const app = document.getElementById('app');
if (app) render(<h1>Mouldkeep</h1>, app);
if (import.meta.env.PROD) void watchUpdates(async () => {});
