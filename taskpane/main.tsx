import { render } from 'preact';
import { App } from './app';
import { openWorkbook } from './workbook/host';

async function start(): Promise<void> {
  const pane = document.getElementById('pane');
  if (!pane) return;
  const port = await openWorkbook();
  render(
    port ? (
      <App port={port} />
    ) : (
      <p class="panel">Washdown works on a workbook: open it from the Home tab of Excel.</p>
    ),
    pane,
  );
}

void start();
