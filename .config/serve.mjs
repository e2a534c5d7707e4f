import { appDir, freshenApp } from './build.mjs';
import { serveApp } from './server.mjs';

const port = Number(process.env.PORT ?? 4173);
freshenApp();
try {
  const { url } = await serveApp({ dir: appDir, port });
  console.log(`Mouldkeep is at ${url}\nStop it with Ctrl+C.`);
} catch (error) {
  const taken = error instanceof Error && 'code' in error && error.code === 'EADDRINUSE';
  if (!taken) throw error;
  console.error(`Port ${port} is taken by another program. Stop that one, or choose another port: PORT=4174 npm start`);
  process.exitCode = 1;
}
