import { app, session } from 'electron';
import { isOwnPage } from './origin.ts';

/** No page but our own, no second window, no permission, whatever the content asks for. */
export function lockDown(devServer: string | null): void {
  session.defaultSession.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.defaultSession.setPermissionCheckHandler(() => false);
  session.defaultSession.setDevicePermissionHandler(() => false);
  app.on('web-contents-created', (_event, contents) => {
    contents.setWindowOpenHandler(() => ({ action: 'deny' }));
    contents.on('will-attach-webview', (event) => event.preventDefault());
    contents.on('will-frame-navigate', (event) => {
      if (!event.isMainFrame || !isOwnPage(event.url, devServer)) event.preventDefault();
    });
    contents.on('will-redirect', (event) => {
      if (!isOwnPage(event.url, devServer)) event.preventDefault();
    });
  });
}
