export { takeLaunchedFile } from '../device/launched-file.ts';
