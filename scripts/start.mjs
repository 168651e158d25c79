// Builds the app and serves it; the demo jobs are offered on its first sheet.
import { build, preview } from 'vite';

await build({ logLevel: 'warn' });
const server = await preview({
  preview: {
    port: Number(process.env.PORT ?? 4173),
    strictPort: false,
    open: !(process.env.CI || process.env.NO_OPEN),
  },
});
server.printUrls();
