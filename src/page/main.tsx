/** The page for the person who examines: opens the catalogue, then shows the record and what the service makes of it. */
import { render } from 'preact';
import { followDraft } from './assessment.ts';
import { App } from './frame/app.tsx';
import { followCatalogue } from './frame/follow-catalogue.ts';
import { followAddress } from './view.ts';

const root = document.getElementById('page');
if (root === null) throw new Error('the page has no place to stand in');
root.replaceChildren();
followAddress();
followCatalogue();
followDraft();
render(<App />, root);
