import './theme/fonts.css';
import './theme/theme.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App';
import { startOffline } from './offline/newerVersion';
import { startTheme } from './theme/chosenTheme';

const root = document.getElementById('root');
if (root === null) throw new Error('the page has no root element');
startTheme();
startOffline();
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
