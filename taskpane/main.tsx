import { render } from 'preact';
import { App } from './app';
import { openWorkbook, PLATFORM_ADDRESS, type Opened } from './workbook/host';

// The platform's script answers within a second or two where its other files are reached.
const PATIENCE = 10_000;

async function start(): Promise<void> {
  const pane = document.getElementById('pane');
  if (!pane) return;
  const timer = setTimeout(() => {
    render(<Unreached />, pane);
  }, PATIENCE);
  const opened = await openWorkbook();
  clearTimeout(timer);
  render(shown(opened), pane);
}

function shown(opened: Opened) {
  if (opened === 'unreached') {
    console.error(`The WASH functions are not loaded: ${PLATFORM_ADDRESS} cannot be reached.`);
    return <Unreached />;
  }
  if (opened === 'outside') {
    return <p class="panel">Washdown works on a workbook: open it from the Home tab of Excel.</p>;
  }
  return <App port={opened} />;
}

function Unreached() {
  return (
    <section class="panel" role="alert">
      <p>The platform’s script cannot be reached, so neither this pane nor the WASH functions work:</p>
      <p>
        <code>{PLATFORM_ADDRESS}</code>
      </p>
      <p>
        Is this computer online? Otherwise ask your network administrator to allow
        appsforoffice.microsoft.com, then close the pane and open it again. Cells keep their current values.
      </p>
    </section>
  );
}

void start();
