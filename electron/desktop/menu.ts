import { Menu } from 'electron';
import type { MenuItemConstructorOptions } from 'electron';

/** The platform's usual menus. Undo and redo of the plan are the interface's own keys, which come first. */
export function setMenu(platform: NodeJS.Platform, packaged: boolean): void {
  const view: MenuItemConstructorOptions[] = [
    { role: 'resetZoom' },
    { role: 'zoomIn' },
    { role: 'zoomOut' },
    { type: 'separator' },
    { role: 'togglefullscreen' },
  ];
  if (!packaged) view.push({ type: 'separator' }, { role: 'reload' }, { role: 'toggleDevTools' });
  const template: MenuItemConstructorOptions[] = [
    { role: 'fileMenu' },
    { role: 'editMenu' },
    { label: 'View', submenu: view },
    { role: 'windowMenu' },
  ];
  if (platform === 'darwin') template.unshift({ role: 'appMenu' });
  Menu.setApplicationMenu(Menu.buildFromTemplate(template));
}
