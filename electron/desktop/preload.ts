/** The interface's whole view of the machine: one function a call of the contract, nothing else. */
import { contextBridge, ipcRenderer } from 'electron';
import { callNames } from '../contract.ts';
import { callChannel } from './origin.ts';

const surface = Object.fromEntries(
  callNames.map((name) => [
    name,
    (input?: unknown): Promise<unknown> => ipcRenderer.invoke(callChannel, name, input),
  ]),
);
contextBridge.exposeInMainWorld('winterbench', surface);
