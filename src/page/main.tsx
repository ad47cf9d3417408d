import './no-eval';
import { render } from 'preact';
import { Whole } from './whole';

const root = document.getElementById('app');
if (root) render(<Whole />, root);
