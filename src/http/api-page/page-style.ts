/** The style of the page: one column of text beside a list of contents, ink on paper, and the same at night. */
export const pageStyle = `
:root { color-scheme: light dark; --paper: #fbfaf7; --ink: #1d2326; --soft: #4f5a60; --line: #d9d5cb; --block: #f1eee6; --mark: #0b5c66; --get: #1c5c33; --post: #7a3b06; --put: #4b3a94; --delete: #96212c; }
@media (prefers-color-scheme: dark) { :root { --paper: #15191b; --ink: #e8e6e0; --soft: #b3bcc0; --line: #363d41; --block: #1e2427; --mark: #7fd3dc; --get: #8fd6a6; --post: #f0b27a; --put: #bdb0f5; --delete: #f5a3aa; } }
* { box-sizing: border-box; }
html { scroll-padding-top: 1rem; }
body { margin: 0; background: var(--paper); color: var(--ink); font: 1rem/1.55 Charter, "Bitstream Charter", "Iowan Old Style", Cambria, Georgia, serif; }
a { color: var(--mark); text-underline-offset: .15em; }
a:focus-visible, summary:focus-visible, pre:focus-visible { outline: 3px solid var(--mark); outline-offset: 2px; }
.skip { position: absolute; left: -99rem; }
.skip:focus { left: 1rem; top: 1rem; background: var(--paper); padding: .5rem 1rem; }
.page { display: grid; grid-template-columns: minmax(14rem, 18rem) minmax(0, 54rem); gap: 3rem; max-width: 78rem; margin: 0 auto; padding: 0 1.5rem 6rem; }
nav { position: sticky; top: 0; align-self: start; max-height: 100vh; overflow: auto; padding: 2.5rem 0; font-size: .875rem; line-height: 1.4; }
nav ul { list-style: none; margin: 0 0 1rem; padding: 0; }
nav li { margin: .2rem 0; overflow-wrap: anywhere; }
nav p { margin: 0 0 .2rem; font-weight: bold; }
nav a { text-decoration: none; }
nav a:hover { text-decoration: underline; }
h1 { font-size: 2.4rem; line-height: 1.15; margin: 2.5rem 0 .5rem; letter-spacing: -.01em; }
h2 { font-size: 1.6rem; line-height: 1.2; margin: 4rem 0 .5rem; padding-top: 1rem; border-top: 3px double var(--line); }
h3 { font-size: 1.1rem; line-height: 1.4; margin: 0; overflow-wrap: anywhere; }
h4 { font-size: .95rem; margin: 1.4rem 0 .4rem; }
p { margin: .5rem 0; max-width: 42rem; }
.lead { font-size: 1.08rem; }
.operation, .schema { margin: 2.2rem 0; padding-top: 1.2rem; border-top: 1px solid var(--line); }
code, pre, .method { font-family: ui-monospace, "Cascadia Mono", Menlo, Consolas, monospace; font-size: .86em; }
.method { display: inline-block; min-width: 3.6em; font-weight: bold; letter-spacing: .03em; }
.get { color: var(--get); } .post { color: var(--post); } .put { color: var(--put); } .delete { color: var(--delete); }
pre { background: var(--block); border-left: 3px solid var(--line); padding: .8rem 1rem; overflow: auto; max-height: 28rem; line-height: 1.45; }
pre code { font-size: .82rem; }
.scroll { overflow-x: auto; }
table { border-collapse: collapse; width: 100%; font-size: .9rem; line-height: 1.45; }
th, td { text-align: left; vertical-align: top; padding: .4rem .8rem .4rem 0; border-bottom: 1px solid var(--line); }
thead th { color: var(--soft); }
tbody th { font-weight: normal; min-width: 9rem; }
.needed { color: var(--delete); font-size: .78rem; font-style: italic; }
.answers { margin: 0; font-size: .92rem; }
.answers div { display: grid; grid-template-columns: 3.5rem 1fr; padding: .3rem 0; border-bottom: 1px solid var(--line); }
.answers dt { font-weight: bold; }
.answers dd { margin: 0; }
details { margin: .3rem 0; }
summary { cursor: pointer; color: var(--mark); }
.values { overflow-wrap: anywhere; max-height: 18rem; overflow: auto; }
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
@media (max-width: 56rem) { .page { display: block; } nav { position: static; max-height: none; padding-bottom: 0; } }
@media print { nav { display: none; } .page { display: block; } }
`;
