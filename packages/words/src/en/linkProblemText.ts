import type { LinkProblem } from '@footmark/link';
import { countText } from '../countText';
import { percentText } from '../percentText';
import type { Said, SaidOfFile } from '../said';
import { answerProblemText } from './answerProblemText';
import { fileProblemText } from './fileProblemText';

const ANEW = 'Scan the code again, or ask for the link anew.';
const AS_A_FILE = 'Send the site as a file.';
const ASK_FOR_FILE = 'Ask for the site as a file.';

/** Why a link or a QR symbol cannot be opened or made, and what to do. */
export function linkProblemText(problem: LinkProblem): SaidOfFile {
  if (problem.code === 'not-an-answer') {
    const { text, cure, problems } = answerProblemText(problem.because);
    return { text, cure, problems };
  }
  if (problem.code !== 'not-a-site') return { ...said(problem), problems: [] };
  if (problem.because.code === 'newer-version') return { ...newer(), problems: [] };
  return {
    text: 'The link came whole, but the site in it is not sound. Nothing of it was opened.',
    cure: ASK_FOR_FILE,
    problems: fileProblemText(problem.because).problems,
  };
}

function said(problem: Exclude<LinkProblem, { code: 'not-a-site' | 'not-an-answer' }>): Said {
  switch (problem.code) {
    case 'not-a-link':
      return {
        text: 'This is not a link to a site.',
        cure: 'Scan the code again, or copy the whole link to its last character.',
      };
    case 'too-long':
      return {
        text: `The link is too long: ${countText(problem.characters)} characters, and the most is ${countText(problem.most)}.`,
        cure: ASK_FOR_FILE,
      };
    case 'cut-off':
      return {
        text: `The link was cut off on the way: ${percentText(problem.have / problem.of)} of it came.`,
        cure: 'Copy the whole link to its last character. Where messages cut long links, ask for a file.',
      };
    case 'damaged':
      return { text: 'The link was changed on the way: its check does not come out right.', cure: ANEW };
    case 'newer-coding':
    case 'newer-version':
      return newer();
    case 'other-shape':
      return {
        text: 'The link was made by a trial version of Footmark, and this one does not read it.',
        cure: ASK_FOR_FILE,
      };
    case 'other-kind':
      return {
        text: 'The link came whole, but what it holds is not a site.',
        cure: 'Ask whoever sent it what it is for; a newer version of Footmark may know it.',
      };
    case 'not-unpacked':
      return {
        text: 'What is in the link cannot be unpacked: Footmark did not make it, or it is far too large.',
        cure: ASK_FOR_FILE,
      };
    case 'too-large':
      return { text: 'The site is too large for a link.', cure: AS_A_FILE };
    case 'too-many-symbols':
      return {
        text: `The site would take ${countText(problem.needed)} QR codes, which is more than anyone scans.`,
        cure: 'Leave out what need not go along, or send the link or a file.',
      };
    case 'other-set':
      return {
        text: 'This code is of another set than those that were scanned before.',
        cure: 'Scan the codes of one sheet, or start again with this one.',
      };
  }
}

function newer(): Said {
  return {
    text: 'The link was made by a newer version of Footmark.',
    cure: 'Load Footmark anew while there is a network, then open the link again.',
  };
}
