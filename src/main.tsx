import { render } from 'preact';

const app = document.getElementById('app');
if (app) render(<h1>Mouldkeep</h1>, app);
