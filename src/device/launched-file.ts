/** What the system hands over when a file is opened with the installed app; not yet in the standard library's types. */
interface LaunchParams {
  readonly files?: readonly { getFile(): Promise<File> }[];
}
interface LaunchQueue {
  setConsumer(consumer: (params: LaunchParams) => void): void;
}

let waiting: File | undefined;

/** Calls back when a file has been opened with the app; `takeLaunchedFile` then gives it. Does nothing where files open no apps. */
export function watchLaunchedFiles(heard: () => void): void {
  const { launchQueue } = window as { launchQueue?: LaunchQueue };
  launchQueue?.setConsumer(({ files }) => {
    files?.[0]?.getFile().then(
      (file) => {
        waiting = file;
        heard();
      },
      // Gone or not allowed any more: the person can still choose it by hand.
      () => undefined,
    );
  });
}

/** The file the app was opened with, once. */
export function takeLaunchedFile(): File | undefined {
  const file = waiting;
  waiting = undefined;
  return file;
}
