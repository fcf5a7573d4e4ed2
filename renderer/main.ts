import { mount } from 'svelte';
import './styles/theme.css';
import App from './App.svelte';
import { connectHost } from './state/host.ts';

const target = document.getElementById('app');
if (!target) throw new Error('expected an element #app in index.html');
mount(App, { target, props: { host: connectHost() } });
