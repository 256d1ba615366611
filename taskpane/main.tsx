import { render } from 'preact';

const pane = document.getElementById('pane');
if (pane) render(<h1>Washdown</h1>, pane);
