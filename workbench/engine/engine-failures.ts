import {
  AstTreeBuilder,
  ErrorType,
  ErrorValueObject,
  Interpreter,
  Lexer,
  LexerNode,
  type CalculateFormulaService,
  type UniverInstance,
} from '#univer';

// Below this no formula has been seen to be too much for the engine's reader.
const SURELY_SHORT = 500;

/**
 * Has whatever fails in the engine while it reads or runs a formula be an error of that formula: thrown, it would end
 * the work on all others.
 * @param univer the engine
 */
export function stayWithTheirCells(univer: UniverInstance): void {
  const injector = univer.__getInjector();
  const lexer = injector.get(Lexer);
  const trees = injector.get(AstTreeBuilder);
  const interpreter = injector.get(Interpreter);
  const read = lexer.treeBuilder.bind(lexer);
  lexer.treeBuilder = (formula, transformSuffix) => {
    try {
      const node = read(formula, transformSuffix);
      if (formula.length > SURELY_SHORT && node instanceof LexerNode) trees.parse(node);
      return node;
    } catch {
      return ErrorType.VALUE;
    }
  };
  const isAsync = interpreter.checkAsyncNode.bind(interpreter);
  interpreter.checkAsyncNode = (node) => {
    try {
      return isAsync(node);
    } catch {
      return false;
    }
  };
  const run = interpreter.execute.bind(interpreter);
  interpreter.execute = (data) => {
    try {
      return run(data);
    } catch {
      return ErrorValueObject.create(ErrorType.VALUE);
    }
  };
}

/** The step of the engine's service whose failure nobody hears of. */
interface Steps {
  _executeStep: () => Promise<unknown>;
}

/**
 * Tells when the engine fails as a whole: it would never end.
 * @param service the engine's service
 * @param failed told of the failure
 */
export function onFailure(service: CalculateFormulaService, failed: (cause: Error) => void): void {
  const steps = service as unknown as Steps;
  const own = Object.getPrototypeOf(steps) as Steps;
  steps._executeStep = async () => {
    try {
      return await own._executeStep.call(steps);
    } catch (cause) {
      failed(cause instanceof Error ? cause : new Error(String(cause)));
      return undefined;
    }
  };
}
