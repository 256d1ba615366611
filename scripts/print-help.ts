import { catalogue } from '../functions/catalogue';

function safe(text: string): string {
  return text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;');
}

const sections = catalogue.map(
  ({ name, description, parameters, rule, example }) => `<section id="${name.toLowerCase()}">
<h2>WASH.${name}</h2>
<p>${safe(description)}</p>
<p><code>${safe(example)}</code></p>
<ul>
${parameters
  .map(
    ({ name: argument, description: says, optional }) =>
      `<li>${argument}${optional ? ' (may be left out)' : ''}: ${safe(says)}</li>`,
  )
  .join('\n')}
</ul>
<p>Rule: ${safe(rule)}.</p>
</section>`,
);

process.stdout.write(`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8" />
<meta name="viewport" content="width=device-width, initial-scale=1" />
<meta http-equiv="Content-Security-Policy" content="default-src 'none'" />
<title>Washdown: the functions</title>
</head>
<body>
<main>
<h1>Washdown: the functions</h1>
<p>Type them as formulas. See also <a href="support.html">help</a>.</p>
${sections.join('\n')}
</main>
</body>
</html>
`);
