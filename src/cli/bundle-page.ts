/**
 * Bundles the page at the bedside into the folder named: one script and one style for the first view, further scripts for
 * what is opened later, each under a name with a hash, and the HTML that names them. A step of the build, since the bundler
 * is there for development only.
 */
import { copyFileSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const [folder] = process.argv.slice(2);
if (folder === undefined) throw new Error('the folder to write into is missing');
const sources = fileURLToPath(new URL('../../src/page', import.meta.url));
const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8')) as {
  version: string;
};
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });
const { metafile } = await build({
  entryPoints: [join(sources, 'main.tsx'), join(sources, 'style', 'page.css')],
  outdir: folder,
  entryNames: '[name]-[hash]',
  chunkNames: 'part-[hash]',
  bundle: true,
  splitting: true,
  format: 'esm',
  target: ['es2022', 'chrome111', 'firefox113', 'safari16.4'],
  minify: true,
  metafile: true,
  tsconfig: join(sources, 'tsconfig.json'),
  define: { 'globalThis.pageVersion': JSON.stringify(version) },
  logLevel: 'warning',
});
const entries = Object.entries(metafile.outputs).filter(([, { entryPoint }]) => entryPoint !== undefined);
const nameOf = (suffix: string): string => {
  const found = entries.find(
    ([path, { entryPoint }]) => path.endsWith(suffix) && /(main\.tsx|page\.css)$/.test(entryPoint ?? ''),
  );
  if (found === undefined) throw new Error(`the bundle has no ${suffix} file`);
  return basename(found[0]);
};
const html = `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<title>Neurological examination</title>
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light">
<link rel="icon" href="/page/icon.svg" type="image/svg+xml">
<link rel="stylesheet" href="/page/${nameOf('.css')}">
<script type="module" src="/page/${nameOf('.js')}"></script>
</head>
<body>
<div id="page">
<p>The examination is opening. It needs JavaScript.</p>
<p>Decision support for trained clinicians, not a diagnosis.</p>
</div>
</body>
</html>
`;
copyFileSync(join(sources, 'icon.svg'), join(folder, 'icon.svg'));
writeFileSync(join(folder, 'licences.txt'), licences());
writeFileSync(join(folder, 'index.html'), html);

/** The notices of the libraries that are bundled, which their licences want to travel with every copy. */
function licences(): string {
  const bundled = [
    ...new Set(
      Object.keys(metafile.inputs).flatMap((path) => /node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(path)?.[1] ?? []),
    ),
  ];
  return bundled
    .sort()
    .map((name) => {
      const at = new URL(`../../node_modules/${name}/`, import.meta.url);
      const { version } = JSON.parse(readFileSync(new URL('package.json', at), 'utf8')) as { version: string };
      return `${name} ${version}\n\n${readFileSync(new URL('LICENSE', at), 'utf8').trim()}\n`;
    })
    .join('\n\n');
}
