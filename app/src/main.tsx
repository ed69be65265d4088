import './theme/fonts.css';
import './theme/theme.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App';
import { startTheme } from './theme/chosenTheme';

const root = document.getElementById('root');
if (root === null) throw new Error('the page has no root element');
startTheme();
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
